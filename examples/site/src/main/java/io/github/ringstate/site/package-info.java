/**
 * Everything there is to read, in one folder that opens from disk: a start page for each kind of
 * reader, the guides, the Javadoc with the page of equations, the validation report, the page of
 * results and a gallery of sheets. {@link io.github.ringstate.site.Site} makes it.
 */
@NullMarked
package io.github.ringstate.site;

import org.jspecify.annotations.NullMarked;
