/**
 * What nobody has to ask for: days that pass, papers that are made, mail that is sent.
 * Each tick calls what the modules below already do; no rule stands here.
 */
@NullMarked
package changeover.web.timers;

import org.jspecify.annotations.NullMarked;
