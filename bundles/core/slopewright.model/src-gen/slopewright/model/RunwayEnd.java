/**
 */
package slopewright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Runway End</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.RunwayEnd#getThreshold <em>Threshold</em>}</li>
 *   <li>{@link slopewright.model.RunwayEnd#getTrueBearingDeg <em>True Bearing Deg</em>}</li>
 *   <li>{@link slopewright.model.RunwayEnd#getThresholdElevationM <em>Threshold Elevation M</em>}</li>
 *   <li>{@link slopewright.model.RunwayEnd#getDisplacedThresholdM <em>Displaced Threshold M</em>}</li>
 *   <li>{@link slopewright.model.RunwayEnd#getExtremityElevationM <em>Extremity Elevation M</em>}</li>
 *   <li>{@link slopewright.model.RunwayEnd#getLandingDistanceM <em>Landing Distance M</em>}</li>
 *   <li>{@link slopewright.model.RunwayEnd#getAimingPointDistanceM <em>Aiming Point Distance M</em>}</li>
 *   <li>{@link slopewright.model.RunwayEnd#getSiteProfile <em>Site Profile</em>}</li>
 *   <li>{@link slopewright.model.RunwayEnd#getHazardousTerrain <em>Hazardous Terrain</em>}</li>
 *   <li>{@link slopewright.model.RunwayEnd#getSiteProfileSource <em>Site Profile Source</em>}</li>
 *   <li>{@link slopewright.model.RunwayEnd#getSiteProfileDate <em>Site Profile Date</em>}</li>
 *   <li>{@link slopewright.model.RunwayEnd#getSiteProfileAccuracyM <em>Site Profile Accuracy M</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getRunwayEnd()
 * @model
 * @generated
 */
public interface RunwayEnd extends ApproachHost {
	/**
	 * Returns the value of the '<em><b>Threshold</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Threshold</em>' containment reference.
	 * @see #setThreshold(Place)
	 * @see slopewright.model.SlopewrightPackage#getRunwayEnd_Threshold()
	 * @model containment="true"
	 * @generated
	 */
	Place getThreshold();

	/**
	 * Sets the value of the '{@link slopewright.model.RunwayEnd#getThreshold <em>Threshold</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Threshold</em>' containment reference.
	 * @see #getThreshold()
	 * @generated
	 */
	void setThreshold(Place value);

	/**
	 * Returns the value of the '<em><b>True Bearing Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>True Bearing Deg</em>' attribute.
	 * @see #setTrueBearingDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getRunwayEnd_TrueBearingDeg()
	 * @model
	 * @generated
	 */
	Double getTrueBearingDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.RunwayEnd#getTrueBearingDeg <em>True Bearing Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>True Bearing Deg</em>' attribute.
	 * @see #getTrueBearingDeg()
	 * @generated
	 */
	void setTrueBearingDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Threshold Elevation M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Threshold Elevation M</em>' attribute.
	 * @see #setThresholdElevationM(Double)
	 * @see slopewright.model.SlopewrightPackage#getRunwayEnd_ThresholdElevationM()
	 * @model
	 * @generated
	 */
	Double getThresholdElevationM();

	/**
	 * Sets the value of the '{@link slopewright.model.RunwayEnd#getThresholdElevationM <em>Threshold Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Threshold Elevation M</em>' attribute.
	 * @see #getThresholdElevationM()
	 * @generated
	 */
	void setThresholdElevationM(Double value);

	/**
	 * Returns the value of the '<em><b>Displaced Threshold M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Displaced Threshold M</em>' attribute.
	 * @see #setDisplacedThresholdM(Double)
	 * @see slopewright.model.SlopewrightPackage#getRunwayEnd_DisplacedThresholdM()
	 * @model
	 * @generated
	 */
	Double getDisplacedThresholdM();

	/**
	 * Sets the value of the '{@link slopewright.model.RunwayEnd#getDisplacedThresholdM <em>Displaced Threshold M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Displaced Threshold M</em>' attribute.
	 * @see #getDisplacedThresholdM()
	 * @generated
	 */
	void setDisplacedThresholdM(Double value);

	/**
	 * Returns the value of the '<em><b>Extremity Elevation M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Extremity Elevation M</em>' attribute.
	 * @see #setExtremityElevationM(Double)
	 * @see slopewright.model.SlopewrightPackage#getRunwayEnd_ExtremityElevationM()
	 * @model
	 * @generated
	 */
	Double getExtremityElevationM();

	/**
	 * Sets the value of the '{@link slopewright.model.RunwayEnd#getExtremityElevationM <em>Extremity Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Extremity Elevation M</em>' attribute.
	 * @see #getExtremityElevationM()
	 * @generated
	 */
	void setExtremityElevationM(Double value);

	/**
	 * Returns the value of the '<em><b>Landing Distance M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Landing Distance M</em>' attribute.
	 * @see #setLandingDistanceM(Double)
	 * @see slopewright.model.SlopewrightPackage#getRunwayEnd_LandingDistanceM()
	 * @model
	 * @generated
	 */
	Double getLandingDistanceM();

	/**
	 * Sets the value of the '{@link slopewright.model.RunwayEnd#getLandingDistanceM <em>Landing Distance M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Landing Distance M</em>' attribute.
	 * @see #getLandingDistanceM()
	 * @generated
	 */
	void setLandingDistanceM(Double value);

	/**
	 * Returns the value of the '<em><b>Aiming Point Distance M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Aiming Point Distance M</em>' attribute.
	 * @see #setAimingPointDistanceM(Double)
	 * @see slopewright.model.SlopewrightPackage#getRunwayEnd_AimingPointDistanceM()
	 * @model
	 * @generated
	 */
	Double getAimingPointDistanceM();

	/**
	 * Sets the value of the '{@link slopewright.model.RunwayEnd#getAimingPointDistanceM <em>Aiming Point Distance M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Aiming Point Distance M</em>' attribute.
	 * @see #getAimingPointDistanceM()
	 * @generated
	 */
	void setAimingPointDistanceM(Double value);

	/**
	 * Returns the value of the '<em><b>Site Profile</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.ProfilePoint}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Site Profile</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getRunwayEnd_SiteProfile()
	 * @model containment="true"
	 * @generated
	 */
	EList<ProfilePoint> getSiteProfile();

	/**
	 * Returns the value of the '<em><b>Hazardous Terrain</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Hazardous Terrain</em>' attribute.
	 * @see #setHazardousTerrain(Boolean)
	 * @see slopewright.model.SlopewrightPackage#getRunwayEnd_HazardousTerrain()
	 * @model
	 * @generated
	 */
	Boolean getHazardousTerrain();

	/**
	 * Sets the value of the '{@link slopewright.model.RunwayEnd#getHazardousTerrain <em>Hazardous Terrain</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hazardous Terrain</em>' attribute.
	 * @see #getHazardousTerrain()
	 * @generated
	 */
	void setHazardousTerrain(Boolean value);

	/**
	 * Returns the value of the '<em><b>Site Profile Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Site Profile Source</em>' attribute.
	 * @see #setSiteProfileSource(String)
	 * @see slopewright.model.SlopewrightPackage#getRunwayEnd_SiteProfileSource()
	 * @model
	 * @generated
	 */
	String getSiteProfileSource();

	/**
	 * Sets the value of the '{@link slopewright.model.RunwayEnd#getSiteProfileSource <em>Site Profile Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Site Profile Source</em>' attribute.
	 * @see #getSiteProfileSource()
	 * @generated
	 */
	void setSiteProfileSource(String value);

	/**
	 * Returns the value of the '<em><b>Site Profile Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Site Profile Date</em>' attribute.
	 * @see #setSiteProfileDate(String)
	 * @see slopewright.model.SlopewrightPackage#getRunwayEnd_SiteProfileDate()
	 * @model
	 * @generated
	 */
	String getSiteProfileDate();

	/**
	 * Sets the value of the '{@link slopewright.model.RunwayEnd#getSiteProfileDate <em>Site Profile Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Site Profile Date</em>' attribute.
	 * @see #getSiteProfileDate()
	 * @generated
	 */
	void setSiteProfileDate(String value);

	/**
	 * Returns the value of the '<em><b>Site Profile Accuracy M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Site Profile Accuracy M</em>' attribute.
	 * @see #setSiteProfileAccuracyM(Double)
	 * @see slopewright.model.SlopewrightPackage#getRunwayEnd_SiteProfileAccuracyM()
	 * @model
	 * @generated
	 */
	Double getSiteProfileAccuracyM();

	/**
	 * Sets the value of the '{@link slopewright.model.RunwayEnd#getSiteProfileAccuracyM <em>Site Profile Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Site Profile Accuracy M</em>' attribute.
	 * @see #getSiteProfileAccuracyM()
	 * @generated
	 */
	void setSiteProfileAccuracyM(Double value);

} // RunwayEnd
