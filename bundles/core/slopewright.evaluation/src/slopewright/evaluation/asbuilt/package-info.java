/** An indicator as it was built, against its plan. */
package slopewright.evaluation.asbuilt;
