/**
 * One machine's installation: PostgreSQL, Keycloak and the application, started, watched and stopped together.
 * Nothing of the product's own subject and no CDI may ever be here: it is plain Java that must start when nothing else does.
 */
@NullMarked
package changeover.deploy.launcher;

import org.jspecify.annotations.NullMarked;
