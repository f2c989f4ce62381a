/** Every family on one runway end or helipad, side by side. */
package slopewright.evaluation.comparison;
