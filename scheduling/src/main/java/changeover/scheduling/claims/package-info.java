/**
 * Claims on makers for parts that were replaced under warranty: open until the credit came or was refused.
 * Who pays for the visit is not decided here.
 */
@NullMarked
package changeover.scheduling.claims;

import org.jspecify.annotations.NullMarked;
