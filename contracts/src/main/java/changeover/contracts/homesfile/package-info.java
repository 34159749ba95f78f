/**
 * The homes file: the whole register as one table that goes in and comes out.
 * Nothing here decides what a home or a machine is; it reads and writes what the register already knows.
 */
@NullMarked
package changeover.contracts.homesfile;

import org.jspecify.annotations.NullMarked;
