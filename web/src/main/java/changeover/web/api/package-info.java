/**
 * The API under {@code /api/v1/{slug}/}: JSON in and out, by bearer token, every change with an Operation-Id.
 * No rule stands here, and no page.
 */
@NullMarked
package changeover.web.api;

import org.jspecify.annotations.NullMarked;
