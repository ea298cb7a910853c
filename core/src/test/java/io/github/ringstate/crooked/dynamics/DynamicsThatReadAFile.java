package io.github.ringstate.crooked.dynamics;

import java.nio.file.Path;

record DynamicsThatReadAFile(Path file) {}
