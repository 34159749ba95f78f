/**
 * The assembled application: its entry, with and without HTTP.
 * No rule of the trade and no page may ever be here.
 */
@NullMarked
package changeover.deploy;

import org.jspecify.annotations.NullMarked;
