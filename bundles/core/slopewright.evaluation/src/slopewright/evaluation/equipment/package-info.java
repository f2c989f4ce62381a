/** What is known of the equipment of an aid: how it stands and which light it gives. */
package slopewright.evaluation.equipment;
