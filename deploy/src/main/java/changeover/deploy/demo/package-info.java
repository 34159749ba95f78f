/**
 * The two invented businesses with a year behind them, made by the product's own verbs on days that pass one by one.
 * No row is written here that a person could not have written.
 */
@NullMarked
package changeover.deploy.demo;

import org.jspecify.annotations.NullMarked;
