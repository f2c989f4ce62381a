/** What the errors of setting, place and level can do to a layout. */
package slopewright.evaluation.tolerance;
