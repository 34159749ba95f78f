/**
 * The product's own rules, asked from a command line with somebody's own numbers.
 * Nothing is computed here: each class reads a question, asks the rule where it lives, and writes its answer.
 */
@NullMarked
package changeover.deploy.rule;

import org.jspecify.annotations.NullMarked;
