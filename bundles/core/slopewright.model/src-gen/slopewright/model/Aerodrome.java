/**
 */
package slopewright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Aerodrome</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.Aerodrome#getIdentifier <em>Identifier</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getLatitudeDeg <em>Latitude Deg</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getLongitudeDeg <em>Longitude Deg</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getElevationM <em>Elevation M</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getVerticalDatum <em>Vertical Datum</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getGeoidOffsetM <em>Geoid Offset M</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getCoordinateReference <em>Coordinate Reference</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getCoordinateEpoch <em>Coordinate Epoch</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getCoordinateAccuracyM <em>Coordinate Accuracy M</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getGridRotationDeg <em>Grid Rotation Deg</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getMagneticVariation <em>Magnetic Variation</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getRunways <em>Runways</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getHelipads <em>Helipads</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getAeroplaneGroups <em>Aeroplane Groups</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getObstacles <em>Obstacles</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getGroundLevels <em>Ground Levels</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getTaxiwayEdges <em>Taxiway Edges</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getCircuits <em>Circuits</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getEquipmentTypes <em>Equipment Types</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getBackgroundImages <em>Background Images</em>}</li>
 *   <li>{@link slopewright.model.Aerodrome#getObstacleSurveys <em>Obstacle Surveys</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getAerodrome()
 * @model
 * @generated
 */
public interface Aerodrome extends Named {
	/**
	 * Returns the value of the '<em><b>Identifier</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Identifier</em>' attribute.
	 * @see #setIdentifier(String)
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_Identifier()
	 * @model
	 * @generated
	 */
	String getIdentifier();

	/**
	 * Sets the value of the '{@link slopewright.model.Aerodrome#getIdentifier <em>Identifier</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Identifier</em>' attribute.
	 * @see #getIdentifier()
	 * @generated
	 */
	void setIdentifier(String value);

	/**
	 * Returns the value of the '<em><b>Latitude Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Latitude Deg</em>' attribute.
	 * @see #setLatitudeDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_LatitudeDeg()
	 * @model
	 * @generated
	 */
	Double getLatitudeDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.Aerodrome#getLatitudeDeg <em>Latitude Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Latitude Deg</em>' attribute.
	 * @see #getLatitudeDeg()
	 * @generated
	 */
	void setLatitudeDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Longitude Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Longitude Deg</em>' attribute.
	 * @see #setLongitudeDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_LongitudeDeg()
	 * @model
	 * @generated
	 */
	Double getLongitudeDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.Aerodrome#getLongitudeDeg <em>Longitude Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Longitude Deg</em>' attribute.
	 * @see #getLongitudeDeg()
	 * @generated
	 */
	void setLongitudeDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Elevation M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Elevation M</em>' attribute.
	 * @see #setElevationM(Double)
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_ElevationM()
	 * @model
	 * @generated
	 */
	Double getElevationM();

	/**
	 * Sets the value of the '{@link slopewright.model.Aerodrome#getElevationM <em>Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Elevation M</em>' attribute.
	 * @see #getElevationM()
	 * @generated
	 */
	void setElevationM(Double value);

	/**
	 * Returns the value of the '<em><b>Vertical Datum</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Vertical Datum</em>' attribute.
	 * @see #setVerticalDatum(String)
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_VerticalDatum()
	 * @model
	 * @generated
	 */
	String getVerticalDatum();

	/**
	 * Sets the value of the '{@link slopewright.model.Aerodrome#getVerticalDatum <em>Vertical Datum</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vertical Datum</em>' attribute.
	 * @see #getVerticalDatum()
	 * @generated
	 */
	void setVerticalDatum(String value);

	/**
	 * Returns the value of the '<em><b>Geoid Offset M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Geoid Offset M</em>' attribute.
	 * @see #setGeoidOffsetM(Double)
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_GeoidOffsetM()
	 * @model
	 * @generated
	 */
	Double getGeoidOffsetM();

	/**
	 * Sets the value of the '{@link slopewright.model.Aerodrome#getGeoidOffsetM <em>Geoid Offset M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Geoid Offset M</em>' attribute.
	 * @see #getGeoidOffsetM()
	 * @generated
	 */
	void setGeoidOffsetM(Double value);

	/**
	 * Returns the value of the '<em><b>Coordinate Reference</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Coordinate Reference</em>' attribute.
	 * @see #setCoordinateReference(String)
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_CoordinateReference()
	 * @model
	 * @generated
	 */
	String getCoordinateReference();

	/**
	 * Sets the value of the '{@link slopewright.model.Aerodrome#getCoordinateReference <em>Coordinate Reference</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Coordinate Reference</em>' attribute.
	 * @see #getCoordinateReference()
	 * @generated
	 */
	void setCoordinateReference(String value);

	/**
	 * Returns the value of the '<em><b>Coordinate Epoch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Coordinate Epoch</em>' attribute.
	 * @see #setCoordinateEpoch(Double)
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_CoordinateEpoch()
	 * @model
	 * @generated
	 */
	Double getCoordinateEpoch();

	/**
	 * Sets the value of the '{@link slopewright.model.Aerodrome#getCoordinateEpoch <em>Coordinate Epoch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Coordinate Epoch</em>' attribute.
	 * @see #getCoordinateEpoch()
	 * @generated
	 */
	void setCoordinateEpoch(Double value);

	/**
	 * Returns the value of the '<em><b>Coordinate Accuracy M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Coordinate Accuracy M</em>' attribute.
	 * @see #setCoordinateAccuracyM(Double)
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_CoordinateAccuracyM()
	 * @model
	 * @generated
	 */
	Double getCoordinateAccuracyM();

	/**
	 * Sets the value of the '{@link slopewright.model.Aerodrome#getCoordinateAccuracyM <em>Coordinate Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Coordinate Accuracy M</em>' attribute.
	 * @see #getCoordinateAccuracyM()
	 * @generated
	 */
	void setCoordinateAccuracyM(Double value);

	/**
	 * Returns the value of the '<em><b>Grid Rotation Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Grid Rotation Deg</em>' attribute.
	 * @see #setGridRotationDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_GridRotationDeg()
	 * @model
	 * @generated
	 */
	Double getGridRotationDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.Aerodrome#getGridRotationDeg <em>Grid Rotation Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Grid Rotation Deg</em>' attribute.
	 * @see #getGridRotationDeg()
	 * @generated
	 */
	void setGridRotationDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Magnetic Variation</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Magnetic Variation</em>' containment reference.
	 * @see #setMagneticVariation(MagneticVariation)
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_MagneticVariation()
	 * @model containment="true"
	 * @generated
	 */
	MagneticVariation getMagneticVariation();

	/**
	 * Sets the value of the '{@link slopewright.model.Aerodrome#getMagneticVariation <em>Magnetic Variation</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Magnetic Variation</em>' containment reference.
	 * @see #getMagneticVariation()
	 * @generated
	 */
	void setMagneticVariation(MagneticVariation value);

	/**
	 * Returns the value of the '<em><b>Runways</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.Runway}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Runways</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_Runways()
	 * @model containment="true"
	 * @generated
	 */
	EList<Runway> getRunways();

	/**
	 * Returns the value of the '<em><b>Helipads</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.Helipad}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Helipads</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_Helipads()
	 * @model containment="true"
	 * @generated
	 */
	EList<Helipad> getHelipads();

	/**
	 * Returns the value of the '<em><b>Aeroplane Groups</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.AeroplaneGroup}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Aeroplane Groups</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_AeroplaneGroups()
	 * @model containment="true"
	 * @generated
	 */
	EList<AeroplaneGroup> getAeroplaneGroups();

	/**
	 * Returns the value of the '<em><b>Obstacles</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.Obstacle}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Obstacles</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_Obstacles()
	 * @model containment="true"
	 * @generated
	 */
	EList<Obstacle> getObstacles();

	/**
	 * Returns the value of the '<em><b>Ground Levels</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.GroundLevel}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ground Levels</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_GroundLevels()
	 * @model containment="true"
	 * @generated
	 */
	EList<GroundLevel> getGroundLevels();

	/**
	 * Returns the value of the '<em><b>Taxiway Edges</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.TaxiwayEdge}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Taxiway Edges</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_TaxiwayEdges()
	 * @model containment="true"
	 * @generated
	 */
	EList<TaxiwayEdge> getTaxiwayEdges();

	/**
	 * Returns the value of the '<em><b>Circuits</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.Circuit}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Circuits</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_Circuits()
	 * @model containment="true"
	 * @generated
	 */
	EList<Circuit> getCircuits();

	/**
	 * Returns the value of the '<em><b>Equipment Types</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.EquipmentType}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Equipment Types</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_EquipmentTypes()
	 * @model containment="true"
	 * @generated
	 */
	EList<EquipmentType> getEquipmentTypes();

	/**
	 * Returns the value of the '<em><b>Background Images</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.BackgroundImage}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Background Images</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_BackgroundImages()
	 * @model containment="true"
	 * @generated
	 */
	EList<BackgroundImage> getBackgroundImages();

	/**
	 * Returns the value of the '<em><b>Obstacle Surveys</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.ObstacleSurvey}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Obstacle Surveys</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getAerodrome_ObstacleSurveys()
	 * @model containment="true"
	 * @generated
	 */
	EList<ObstacleSurvey> getObstacleSurveys();

} // Aerodrome
