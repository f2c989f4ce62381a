/** A landing site all round: which landing directions and slopes are clear of obstacles, with what governs each. */
package slopewright.evaluation.landing;
