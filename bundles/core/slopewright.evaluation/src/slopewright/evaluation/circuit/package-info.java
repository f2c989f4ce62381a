/** What hangs on the circuits: the loads of lamps and cable. */
package slopewright.evaluation.circuit;
