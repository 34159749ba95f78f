/**
 * Texts held in both languages, and refusals: the sentences for the person in front of the screen.
 * No page, no database and no rule of the trade belongs here.
 */
@NullMarked
package changeover.contracts.words;

import org.jspecify.annotations.NullMarked;
