/**
 * The table of roads that an installation may have: asked over HTTP outside of every transaction, remembered for a day. Never
 * here: what is done with a road.
 */
@NullMarked
package changeover.web.roads;

import org.jspecify.annotations.NullMarked;
