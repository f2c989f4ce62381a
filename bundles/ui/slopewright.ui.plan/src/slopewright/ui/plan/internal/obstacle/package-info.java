/** An obstacle that is typed, as it was measured from a helipad or by its coordinates. */
package slopewright.ui.plan.internal.obstacle;
