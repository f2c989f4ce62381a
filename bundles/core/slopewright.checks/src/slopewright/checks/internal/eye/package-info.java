/** Rules about eye heights, wheel clearances and distances. */
package slopewright.checks.internal.eye;
