/**
 * Years that follow what was really done at visits. Never here: how a year is laid, or what households do themselves.
 */
@NullMarked
package changeover.scheduling.recounts;

import org.jspecify.annotations.NullMarked;
