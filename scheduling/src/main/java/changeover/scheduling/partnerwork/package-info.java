/** What a partner did at a visit becomes its close-out. Who the partner is and what was agreed never belongs here. */
@NullMarked
package changeover.scheduling.partnerwork;

import org.jspecify.annotations.NullMarked;
