/**
 */
package slopewright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Magnetic Variation</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.MagneticVariation#getVariationDeg <em>Variation Deg</em>}</li>
 *   <li>{@link slopewright.model.MagneticVariation#getAnnualChangeDeg <em>Annual Change Deg</em>}</li>
 *   <li>{@link slopewright.model.MagneticVariation#getDate <em>Date</em>}</li>
 *   <li>{@link slopewright.model.MagneticVariation#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getMagneticVariation()
 * @model
 * @generated
 */
public interface MagneticVariation extends Identified {
	/**
	 * Returns the value of the '<em><b>Variation Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Variation Deg</em>' attribute.
	 * @see #setVariationDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getMagneticVariation_VariationDeg()
	 * @model
	 * @generated
	 */
	Double getVariationDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.MagneticVariation#getVariationDeg <em>Variation Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Variation Deg</em>' attribute.
	 * @see #getVariationDeg()
	 * @generated
	 */
	void setVariationDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Annual Change Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Annual Change Deg</em>' attribute.
	 * @see #setAnnualChangeDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getMagneticVariation_AnnualChangeDeg()
	 * @model
	 * @generated
	 */
	Double getAnnualChangeDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.MagneticVariation#getAnnualChangeDeg <em>Annual Change Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Annual Change Deg</em>' attribute.
	 * @see #getAnnualChangeDeg()
	 * @generated
	 */
	void setAnnualChangeDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(String)
	 * @see slopewright.model.SlopewrightPackage#getMagneticVariation_Date()
	 * @model
	 * @generated
	 */
	String getDate();

	/**
	 * Sets the value of the '{@link slopewright.model.MagneticVariation#getDate <em>Date</em>}' attribute.
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
	 * @see slopewright.model.SlopewrightPackage#getMagneticVariation_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link slopewright.model.MagneticVariation#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

} // MagneticVariation
