/**
 * The library against the outside: published definitions, curves and tables, and the charts that
 * show how far apart they are.
 */
@NullMarked
package io.github.ringstate.validation;

import org.jspecify.annotations.NullMarked;
