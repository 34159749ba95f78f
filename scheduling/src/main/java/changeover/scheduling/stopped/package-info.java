/**
 * Machines that must not be used: stopped by anybody, their duties by place, back in service only by the ticket.
 * What a visit found is judged in close-out, and who is written to stands downstream.
 */
@NullMarked
package changeover.scheduling.stopped;

import org.jspecify.annotations.NullMarked;
