package io.github.ringstate.crooked.util;

final class ClassInAPackageForAnything {}
