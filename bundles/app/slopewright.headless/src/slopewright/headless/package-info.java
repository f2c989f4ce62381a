/** The command line: arguments, exit codes and the batch loop. */
package slopewright.headless;
