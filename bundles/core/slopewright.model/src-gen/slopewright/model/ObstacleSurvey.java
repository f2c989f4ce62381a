/**
 */
package slopewright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Obstacle Survey</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.ObstacleSurvey#getDate <em>Date</em>}</li>
 *   <li>{@link slopewright.model.ObstacleSurvey#getSource <em>Source</em>}</li>
 *   <li>{@link slopewright.model.ObstacleSurvey#getReachM <em>Reach M</em>}</li>
 *   <li>{@link slopewright.model.ObstacleSurvey#getHalfWidthM <em>Half Width M</em>}</li>
 *   <li>{@link slopewright.model.ObstacleSurvey#getHorizontalAccuracyM <em>Horizontal Accuracy M</em>}</li>
 *   <li>{@link slopewright.model.ObstacleSurvey#getVerticalAccuracyM <em>Vertical Accuracy M</em>}</li>
 *   <li>{@link slopewright.model.ObstacleSurvey#getHosts <em>Hosts</em>}</li>
 *   <li>{@link slopewright.model.ObstacleSurvey#getAllRound <em>All Round</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getObstacleSurvey()
 * @model
 * @generated
 */
public interface ObstacleSurvey extends Named {
	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(String)
	 * @see slopewright.model.SlopewrightPackage#getObstacleSurvey_Date()
	 * @model
	 * @generated
	 */
	String getDate();

	/**
	 * Sets the value of the '{@link slopewright.model.ObstacleSurvey#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(String value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see slopewright.model.SlopewrightPackage#getObstacleSurvey_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link slopewright.model.ObstacleSurvey#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

	/**
	 * Returns the value of the '<em><b>Reach M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Reach M</em>' attribute.
	 * @see #setReachM(Double)
	 * @see slopewright.model.SlopewrightPackage#getObstacleSurvey_ReachM()
	 * @model
	 * @generated
	 */
	Double getReachM();

	/**
	 * Sets the value of the '{@link slopewright.model.ObstacleSurvey#getReachM <em>Reach M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reach M</em>' attribute.
	 * @see #getReachM()
	 * @generated
	 */
	void setReachM(Double value);

	/**
	 * Returns the value of the '<em><b>Half Width M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Half Width M</em>' attribute.
	 * @see #setHalfWidthM(Double)
	 * @see slopewright.model.SlopewrightPackage#getObstacleSurvey_HalfWidthM()
	 * @model
	 * @generated
	 */
	Double getHalfWidthM();

	/**
	 * Sets the value of the '{@link slopewright.model.ObstacleSurvey#getHalfWidthM <em>Half Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Half Width M</em>' attribute.
	 * @see #getHalfWidthM()
	 * @generated
	 */
	void setHalfWidthM(Double value);

	/**
	 * Returns the value of the '<em><b>Horizontal Accuracy M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Horizontal Accuracy M</em>' attribute.
	 * @see #setHorizontalAccuracyM(Double)
	 * @see slopewright.model.SlopewrightPackage#getObstacleSurvey_HorizontalAccuracyM()
	 * @model
	 * @generated
	 */
	Double getHorizontalAccuracyM();

	/**
	 * Sets the value of the '{@link slopewright.model.ObstacleSurvey#getHorizontalAccuracyM <em>Horizontal Accuracy M</em>}' attribute.
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
	 * @see slopewright.model.SlopewrightPackage#getObstacleSurvey_VerticalAccuracyM()
	 * @model
	 * @generated
	 */
	Double getVerticalAccuracyM();

	/**
	 * Sets the value of the '{@link slopewright.model.ObstacleSurvey#getVerticalAccuracyM <em>Vertical Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vertical Accuracy M</em>' attribute.
	 * @see #getVerticalAccuracyM()
	 * @generated
	 */
	void setVerticalAccuracyM(Double value);

	/**
	 * Returns the value of the '<em><b>Hosts</b></em>' reference list.
	 * The list contents are of type {@link slopewright.model.ApproachHost}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Hosts</em>' reference list.
	 * @see slopewright.model.SlopewrightPackage#getObstacleSurvey_Hosts()
	 * @model
	 * @generated
	 */
	EList<ApproachHost> getHosts();

	/**
	 * Returns the value of the '<em><b>All Round</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>All Round</em>' attribute.
	 * @see #setAllRound(Boolean)
	 * @see slopewright.model.SlopewrightPackage#getObstacleSurvey_AllRound()
	 * @model
	 * @generated
	 */
	Boolean getAllRound();

	/**
	 * Sets the value of the '{@link slopewright.model.ObstacleSurvey#getAllRound <em>All Round</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>All Round</em>' attribute.
	 * @see #getAllRound()
	 * @generated
	 */
	void setAllRound(Boolean value);

} // ObstacleSurvey
