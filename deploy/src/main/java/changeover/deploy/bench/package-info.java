/**
 * The product measured against bare tools, both sides interleaved in one run, so that a noisy machine judges both alike.
 * The other side is written plainly here, never the product's own slower code, and nothing of the product is switched off.
 */
@NullMarked
package changeover.deploy.bench;

import org.jspecify.annotations.NullMarked;
