package io.github.ringstate.crooked.flight;

import java.nio.file.Path;

record FlightThatReadsAFile(Path file) {}
