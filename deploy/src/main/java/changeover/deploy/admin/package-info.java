/**
 * What an operator does by command line, through the same roles and locks as the product.
 * No page may ever be here, and no rule: a command asks the product and prints its answer.
 */
@NullMarked
package changeover.deploy.admin;

import org.jspecify.annotations.NullMarked;
