/** Rules about units with several sectors. */
package slopewright.checks.internal.sector;
