/** Checks of the structure of the whole tree. */
package slopewright.arch;
