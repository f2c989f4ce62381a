/** The sweep of a whole country as a job for Apache Spark. */
package slopewright.spark;
