/**
 * Two businesses full of rows, and whoever tries to reach from one into the other or to bring bad things in. What is here
 * tries routes, forms and rows as they are found in the running application; no list of them is kept by hand.
 */
@org.jspecify.annotations.NullMarked
package changeover.web.walls;
