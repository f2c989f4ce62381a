/** What an approach aid gives: evaluated once, under its own rule set, against everything that stands there, and read by every door. */
package slopewright.evaluation;
