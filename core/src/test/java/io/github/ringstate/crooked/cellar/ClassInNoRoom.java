package io.github.ringstate.crooked.cellar;

final class ClassInNoRoom {}
