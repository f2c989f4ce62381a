/** Rules about what stands there. */
package slopewright.checks.internal.obstacle;
