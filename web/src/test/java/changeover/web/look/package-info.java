/**
 * The living style sheet: every shared part of a page, drawn with invented people, by day and by night.
 * Never here: a database, a sign-in, or a page of the product itself.
 */
@NullMarked
package changeover.web.look;

import org.jspecify.annotations.NullMarked;
