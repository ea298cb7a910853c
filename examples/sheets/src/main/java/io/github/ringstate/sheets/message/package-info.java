/**
 * Sentences for people, kept where an editor finds them.
 *
 * <p>Each subject has an interface, one method for a sentence, and beside it a text file of the
 * same name with the words. The file is Mustache: <code>{{name}}</code> is the argument of that
 * name. Nothing is said twice, and nothing that is computed stands in a file; see {@link
 * io.github.ringstate.sheets.message.Messages}.
 */
@NullMarked
package io.github.ringstate.sheets.message;

import org.jspecify.annotations.NullMarked;
