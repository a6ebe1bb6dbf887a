package org.barsheet.plan;

import java.nio.file.Path;
import java.util.Optional;
import org.barsheet.pulse.TempoRequest;

/**
 * The music a film is planned on.
 *
 * @param score the MIDI file, resolved against the plan's folder
 * @param tempo what is asked about tempo and bars
 * @param recording of the music, where the plan names one
 */
public record MusicRequest(Path score, TempoRequest tempo, Optional<Recording> recording) {}
