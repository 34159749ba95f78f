/**
 * What was promised to whom: agreements offered, accepted, in force, ended and renewed, with their own copied facts.
 * Never here: a visit, an invoice, or what a plan says today.
 */
@NullMarked
package changeover.contracts.agreements;

import org.jspecify.annotations.NullMarked;
