/**
 * A home's year, a reading and a crew's weeks as lines and marks on paper, before anyone draws them: the page and the document share them.
 * Never here: colours, markup, a font, a database or a clock.
 */
@NullMarked
package changeover.billing.documents.band;

import org.jspecify.annotations.NullMarked;
