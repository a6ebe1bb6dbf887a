package org.barsheet.movie;

import java.nio.file.Path;
import java.util.Optional;
import org.barsheet.plan.Performer;

/** What there is of a film already. */
public interface Material {

  /** Only what is planned and drawn. */
  Material NONE =
      new Material() {
        @Override
        public Optional<Path> photograph(String name) {
          return Optional.empty();
        }

        @Override
        public Optional<Path> clip(Performer performer) {
          return Optional.empty();
        }
      };

  /** The file of a photograph that has been taken, by its permanent name. */
  Optional<Path> photograph(String name);

  /** The file of a performer's clip that has come and has moving images. */
  Optional<Path> clip(Performer performer);
}
