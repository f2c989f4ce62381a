/**
 */
package slopewright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Obstacle</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.Obstacle#getKind <em>Kind</em>}</li>
 *   <li>{@link slopewright.model.Obstacle#getPlaces <em>Places</em>}</li>
 *   <li>{@link slopewright.model.Obstacle#getTopElevationM <em>Top Elevation M</em>}</li>
 *   <li>{@link slopewright.model.Obstacle#getHorizontalAccuracyM <em>Horizontal Accuracy M</em>}</li>
 *   <li>{@link slopewright.model.Obstacle#getVerticalAccuracyM <em>Vertical Accuracy M</em>}</li>
 *   <li>{@link slopewright.model.Obstacle#getLighted <em>Lighted</em>}</li>
 *   <li>{@link slopewright.model.Obstacle#getShielded <em>Shielded</em>}</li>
 *   <li>{@link slopewright.model.Obstacle#getShieldedBy <em>Shielded By</em>}</li>
 *   <li>{@link slopewright.model.Obstacle#getShieldingStudy <em>Shielding Study</em>}</li>
 *   <li>{@link slopewright.model.Obstacle#getShieldingStudyDate <em>Shielding Study Date</em>}</li>
 *   <li>{@link slopewright.model.Obstacle#getShieldingStudyPerson <em>Shielding Study Person</em>}</li>
 *   <li>{@link slopewright.model.Obstacle#getTemporary <em>Temporary</em>}</li>
 *   <li>{@link slopewright.model.Obstacle#getSource <em>Source</em>}</li>
 *   <li>{@link slopewright.model.Obstacle#getDate <em>Date</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getObstacle()
 * @model
 * @generated
 */
public interface Obstacle extends Named {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link slopewright.model.ObstacleKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see slopewright.model.ObstacleKind
	 * @see #setKind(ObstacleKind)
	 * @see slopewright.model.SlopewrightPackage#getObstacle_Kind()
	 * @model
	 * @generated
	 */
	ObstacleKind getKind();

	/**
	 * Sets the value of the '{@link slopewright.model.Obstacle#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see slopewright.model.ObstacleKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(ObstacleKind value);

	/**
	 * Returns the value of the '<em><b>Places</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.Place}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Places</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getObstacle_Places()
	 * @model containment="true"
	 * @generated
	 */
	EList<Place> getPlaces();

	/**
	 * Returns the value of the '<em><b>Top Elevation M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Top Elevation M</em>' attribute.
	 * @see #setTopElevationM(Double)
	 * @see slopewright.model.SlopewrightPackage#getObstacle_TopElevationM()
	 * @model
	 * @generated
	 */
	Double getTopElevationM();

	/**
	 * Sets the value of the '{@link slopewright.model.Obstacle#getTopElevationM <em>Top Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Top Elevation M</em>' attribute.
	 * @see #getTopElevationM()
	 * @generated
	 */
	void setTopElevationM(Double value);

	/**
	 * Returns the value of the '<em><b>Horizontal Accuracy M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Horizontal Accuracy M</em>' attribute.
	 * @see #setHorizontalAccuracyM(Double)
	 * @see slopewright.model.SlopewrightPackage#getObstacle_HorizontalAccuracyM()
	 * @model
	 * @generated
	 */
	Double getHorizontalAccuracyM();

	/**
	 * Sets the value of the '{@link slopewright.model.Obstacle#getHorizontalAccuracyM <em>Horizontal Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Horizontal Accuracy M</em>' attribute.
	 * @see #getHorizontalAccuracyM()
	 * @generated
	 */
	void setHorizontalAccuracyM(Double value);

	/**
	 * Returns the value of the '<em><b>Vertical Accuracy M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Vertical Accuracy M</em>' attribute.
	 * @see #setVerticalAccuracyM(Double)
	 * @see slopewright.model.SlopewrightPackage#getObstacle_VerticalAccuracyM()
	 * @model
	 * @generated
	 */
	Double getVerticalAccuracyM();

	/**
	 * Sets the value of the '{@link slopewright.model.Obstacle#getVerticalAccuracyM <em>Vertical Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vertical Accuracy M</em>' attribute.
	 * @see #getVerticalAccuracyM()
	 * @generated
	 */
	void setVerticalAccuracyM(Double value);

	/**
	 * Returns the value of the '<em><b>Lighted</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lighted</em>' attribute.
	 * @see #setLighted(Boolean)
	 * @see slopewright.model.SlopewrightPackage#getObstacle_Lighted()
	 * @model
	 * @generated
	 */
	Boolean getLighted();

	/**
	 * Sets the value of the '{@link slopewright.model.Obstacle#getLighted <em>Lighted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lighted</em>' attribute.
	 * @see #getLighted()
	 * @generated
	 */
	void setLighted(Boolean value);

	/**
	 * Returns the value of the '<em><b>Shielded</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Shielded</em>' attribute.
	 * @see #setShielded(Boolean)
	 * @see slopewright.model.SlopewrightPackage#getObstacle_Shielded()
	 * @model
	 * @generated
	 */
	Boolean getShielded();

	/**
	 * Sets the value of the '{@link slopewright.model.Obstacle#getShielded <em>Shielded</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shielded</em>' attribute.
	 * @see #getShielded()
	 * @generated
	 */
	void setShielded(Boolean value);

	/**
	 * Returns the value of the '<em><b>Shielded By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Shielded By</em>' reference.
	 * @see #setShieldedBy(Obstacle)
	 * @see slopewright.model.SlopewrightPackage#getObstacle_ShieldedBy()
	 * @model
	 * @generated
	 */
	Obstacle getShieldedBy();

	/**
	 * Sets the value of the '{@link slopewright.model.Obstacle#getShieldedBy <em>Shielded By</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shielded By</em>' reference.
	 * @see #getShieldedBy()
	 * @generated
	 */
	void setShieldedBy(Obstacle value);

	/**
	 * Returns the value of the '<em><b>Shielding Study</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Shielding Study</em>' attribute.
	 * @see #setShieldingStudy(String)
	 * @see slopewright.model.SlopewrightPackage#getObstacle_ShieldingStudy()
	 * @model
	 * @generated
	 */
	String getShieldingStudy();

	/**
	 * Sets the value of the '{@link slopewright.model.Obstacle#getShieldingStudy <em>Shielding Study</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shielding Study</em>' attribute.
	 * @see #getShieldingStudy()
	 * @generated
	 */
	void setShieldingStudy(String value);

	/**
	 * Returns the value of the '<em><b>Shielding Study Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Shielding Study Date</em>' attribute.
	 * @see #setShieldingStudyDate(String)
	 * @see slopewright.model.SlopewrightPackage#getObstacle_ShieldingStudyDate()
	 * @model
	 * @generated
	 */
	String getShieldingStudyDate();

	/**
	 * Sets the value of the '{@link slopewright.model.Obstacle#getShieldingStudyDate <em>Shielding Study Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shielding Study Date</em>' attribute.
	 * @see #getShieldingStudyDate()
	 * @generated
	 */
	void setShieldingStudyDate(String value);

	/**
	 * Returns the value of the '<em><b>Shielding Study Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Shielding Study Person</em>' attribute.
	 * @see #setShieldingStudyPerson(String)
	 * @see slopewright.model.SlopewrightPackage#getObstacle_ShieldingStudyPerson()
	 * @model
	 * @generated
	 */
	String getShieldingStudyPerson();

	/**
	 * Sets the value of the '{@link slopewright.model.Obstacle#getShieldingStudyPerson <em>Shielding Study Person</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shielding Study Person</em>' attribute.
	 * @see #getShieldingStudyPerson()
	 * @generated
	 */
	void setShieldingStudyPerson(String value);

	/**
	 * Returns the value of the '<em><b>Temporary</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Temporary</em>' attribute.
	 * @see #setTemporary(Boolean)
	 * @see slopewright.model.SlopewrightPackage#getObstacle_Temporary()
	 * @model
	 * @generated
	 */
	Boolean getTemporary();

	/**
	 * Sets the value of the '{@link slopewright.model.Obstacle#getTemporary <em>Temporary</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Temporary</em>' attribute.
	 * @see #getTemporary()
	 * @generated
	 */
	void setTemporary(Boolean value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see slopewright.model.SlopewrightPackage#getObstacle_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link slopewright.model.Obstacle#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(String)
	 * @see slopewright.model.SlopewrightPackage#getObstacle_Date()
	 * @model
	 * @generated
	 */
	String getDate();

	/**
	 * Sets the value of the '{@link slopewright.model.Obstacle#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(String value);

} // Obstacle
