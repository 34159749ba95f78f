/**
 * What is given up of an issued document that nobody will pay, with its part of the taxes, and taken back when money comes.
 * Never here: a change to a document; what is given up stands beside it.
 */
@NullMarked
package changeover.billing.writeoffs;

import org.jspecify.annotations.NullMarked;
