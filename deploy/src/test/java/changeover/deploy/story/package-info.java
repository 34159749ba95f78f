/**
 * The story walked in a real browser, through Keycloak, on a whole installation.
 * What can be tried without a browser is tried where it lives, never here.
 */
@NullMarked
package changeover.deploy.story;

import org.jspecify.annotations.NullMarked;
