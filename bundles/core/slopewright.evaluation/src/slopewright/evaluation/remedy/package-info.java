/** What cures a penetration of the obstacle surface, computed. */
package slopewright.evaluation.remedy;
