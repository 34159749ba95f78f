/**
 * Pictures that people hand in: looked at before they are decoded, drawn anew, and kept only as our own JPEG.
 *
 * <p>Never here: bytes as somebody sent them, where a picture is stored, or what it shows.
 */
@NullMarked
package changeover.contracts.pictures;

import org.jspecify.annotations.NullMarked;
