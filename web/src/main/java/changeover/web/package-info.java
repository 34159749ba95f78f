/**
 * What people see: the pages, the API, the sign-in and the timers.
 * Nothing is decided here that a rule below could decide.
 */
@NullMarked
package changeover.web;

import org.jspecify.annotations.NullMarked;
