/**
 */
package slopewright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Approach Host</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.ApproachHost#getDesignator <em>Designator</em>}</li>
 *   <li>{@link slopewright.model.ApproachHost#getDesiredSlopeDeg <em>Desired Slope Deg</em>}</li>
 *   <li>{@link slopewright.model.ApproachHost#getApproachType <em>Approach Type</em>}</li>
 *   <li>{@link slopewright.model.ApproachHost#getGlidePath <em>Glide Path</em>}</li>
 *   <li>{@link slopewright.model.ApproachHost#getRegularGroups <em>Regular Groups</em>}</li>
 *   <li>{@link slopewright.model.ApproachHost#getAids <em>Aids</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getApproachHost()
 * @model abstract="true"
 * @generated
 */
public interface ApproachHost extends Named {
	/**
	 * Returns the value of the '<em><b>Designator</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Designator</em>' attribute.
	 * @see #setDesignator(String)
	 * @see slopewright.model.SlopewrightPackage#getApproachHost_Designator()
	 * @model
	 * @generated
	 */
	String getDesignator();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachHost#getDesignator <em>Designator</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Designator</em>' attribute.
	 * @see #getDesignator()
	 * @generated
	 */
	void setDesignator(String value);

	/**
	 * Returns the value of the '<em><b>Desired Slope Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Desired Slope Deg</em>' attribute.
	 * @see #setDesiredSlopeDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getApproachHost_DesiredSlopeDeg()
	 * @model
	 * @generated
	 */
	Double getDesiredSlopeDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachHost#getDesiredSlopeDeg <em>Desired Slope Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Desired Slope Deg</em>' attribute.
	 * @see #getDesiredSlopeDeg()
	 * @generated
	 */
	void setDesiredSlopeDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Approach Type</b></em>' attribute.
	 * The literals are from the enumeration {@link slopewright.model.ApproachType}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Approach Type</em>' attribute.
	 * @see slopewright.model.ApproachType
	 * @see #setApproachType(ApproachType)
	 * @see slopewright.model.SlopewrightPackage#getApproachHost_ApproachType()
	 * @model
	 * @generated
	 */
	ApproachType getApproachType();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachHost#getApproachType <em>Approach Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Approach Type</em>' attribute.
	 * @see slopewright.model.ApproachType
	 * @see #getApproachType()
	 * @generated
	 */
	void setApproachType(ApproachType value);

	/**
	 * Returns the value of the '<em><b>Glide Path</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Glide Path</em>' containment reference.
	 * @see #setGlidePath(GlidePathAid)
	 * @see slopewright.model.SlopewrightPackage#getApproachHost_GlidePath()
	 * @model containment="true"
	 * @generated
	 */
	GlidePathAid getGlidePath();

	/**
	 * Sets the value of the '{@link slopewright.model.ApproachHost#getGlidePath <em>Glide Path</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Glide Path</em>' containment reference.
	 * @see #getGlidePath()
	 * @generated
	 */
	void setGlidePath(GlidePathAid value);

	/**
	 * Returns the value of the '<em><b>Regular Groups</b></em>' reference list.
	 * The list contents are of type {@link slopewright.model.AeroplaneGroup}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Regular Groups</em>' reference list.
	 * @see slopewright.model.SlopewrightPackage#getApproachHost_RegularGroups()
	 * @model
	 * @generated
	 */
	EList<AeroplaneGroup> getRegularGroups();

	/**
	 * Returns the value of the '<em><b>Aids</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.ApproachAid}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Aids</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getApproachHost_Aids()
	 * @model containment="true"
	 * @generated
	 */
	EList<ApproachAid> getAids();

} // ApproachHost
