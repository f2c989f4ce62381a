/** The direction of magnetic north by a model of the Earth's main field, with the time for which the model holds. */
package slopewright.siting.magnetic;
