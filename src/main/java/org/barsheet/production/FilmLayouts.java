package org.barsheet.production;

import java.util.List;
import org.barsheet.plan.Film;
import org.barsheet.timing.FilmLayout;

/**
 * The best few ways to lay a plan's panels.
 *
 * @param film its settings
 * @param layouts cheapest first: the first is the one the sheets show
 */
public record FilmLayouts(Film film, List<FilmLayout> layouts) {

  public FilmLayouts {
    layouts = List.copyOf(layouts);
  }
}
