/**
 * Who comes in, for which business, and how every form and every request is answered.
 * No page of an audience stands here, and nothing here knows a rule of the trade.
 */
@NullMarked
package changeover.web.session;

import org.jspecify.annotations.NullMarked;
