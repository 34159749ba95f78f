/**
 * The pages of the person who goes to the homes: today's stops, one visit, one task a screen, closing.
 * Nothing is decided here that the close-out decides: every form becomes operations, as from any other device.
 */
@NullMarked
package changeover.web.field;

import org.jspecify.annotations.NullMarked;
