/** Between the model and the siting: requests made of model elements, layouts read from and written to approach aids. */
package slopewright.siting.aid;
