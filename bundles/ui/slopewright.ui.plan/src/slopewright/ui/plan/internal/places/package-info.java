/** Where things lie on the plane of a plan, and how they stand against the obstacle surfaces there. */
package slopewright.ui.plan.internal.places;
