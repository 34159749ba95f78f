/** Examples and the real parts that the tests of every module share. */
package changeover.contracts;
