/**
 */
package slopewright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Background Image</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.BackgroundImage#getPath <em>Path</em>}</li>
 *   <li>{@link slopewright.model.BackgroundImage#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link slopewright.model.BackgroundImage#getFirstColumnPx <em>First Column Px</em>}</li>
 *   <li>{@link slopewright.model.BackgroundImage#getFirstRowPx <em>First Row Px</em>}</li>
 *   <li>{@link slopewright.model.BackgroundImage#getFirstPlace <em>First Place</em>}</li>
 *   <li>{@link slopewright.model.BackgroundImage#getSecondColumnPx <em>Second Column Px</em>}</li>
 *   <li>{@link slopewright.model.BackgroundImage#getSecondRowPx <em>Second Row Px</em>}</li>
 *   <li>{@link slopewright.model.BackgroundImage#getSecondPlace <em>Second Place</em>}</li>
 *   <li>{@link slopewright.model.BackgroundImage#getOpacityPercent <em>Opacity Percent</em>}</li>
 *   <li>{@link slopewright.model.BackgroundImage#getHidden <em>Hidden</em>}</li>
 *   <li>{@link slopewright.model.BackgroundImage#getSource <em>Source</em>}</li>
 *   <li>{@link slopewright.model.BackgroundImage#getDate <em>Date</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getBackgroundImage()
 * @model
 * @generated
 */
public interface BackgroundImage extends Named {
	/**
	 * Returns the value of the '<em><b>Path</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Path</em>' attribute.
	 * @see #setPath(String)
	 * @see slopewright.model.SlopewrightPackage#getBackgroundImage_Path()
	 * @model
	 * @generated
	 */
	String getPath();

	/**
	 * Sets the value of the '{@link slopewright.model.BackgroundImage#getPath <em>Path</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Path</em>' attribute.
	 * @see #getPath()
	 * @generated
	 */
	void setPath(String value);

	/**
	 * Returns the value of the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sha256</em>' attribute.
	 * @see #setSha256(String)
	 * @see slopewright.model.SlopewrightPackage#getBackgroundImage_Sha256()
	 * @model
	 * @generated
	 */
	String getSha256();

	/**
	 * Sets the value of the '{@link slopewright.model.BackgroundImage#getSha256 <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sha256</em>' attribute.
	 * @see #getSha256()
	 * @generated
	 */
	void setSha256(String value);

	/**
	 * Returns the value of the '<em><b>First Column Px</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>First Column Px</em>' attribute.
	 * @see #setFirstColumnPx(Double)
	 * @see slopewright.model.SlopewrightPackage#getBackgroundImage_FirstColumnPx()
	 * @model
	 * @generated
	 */
	Double getFirstColumnPx();

	/**
	 * Sets the value of the '{@link slopewright.model.BackgroundImage#getFirstColumnPx <em>First Column Px</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>First Column Px</em>' attribute.
	 * @see #getFirstColumnPx()
	 * @generated
	 */
	void setFirstColumnPx(Double value);

	/**
	 * Returns the value of the '<em><b>First Row Px</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>First Row Px</em>' attribute.
	 * @see #setFirstRowPx(Double)
	 * @see slopewright.model.SlopewrightPackage#getBackgroundImage_FirstRowPx()
	 * @model
	 * @generated
	 */
	Double getFirstRowPx();

	/**
	 * Sets the value of the '{@link slopewright.model.BackgroundImage#getFirstRowPx <em>First Row Px</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>First Row Px</em>' attribute.
	 * @see #getFirstRowPx()
	 * @generated
	 */
	void setFirstRowPx(Double value);

	/**
	 * Returns the value of the '<em><b>First Place</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>First Place</em>' containment reference.
	 * @see #setFirstPlace(Place)
	 * @see slopewright.model.SlopewrightPackage#getBackgroundImage_FirstPlace()
	 * @model containment="true"
	 * @generated
	 */
	Place getFirstPlace();

	/**
	 * Sets the value of the '{@link slopewright.model.BackgroundImage#getFirstPlace <em>First Place</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>First Place</em>' containment reference.
	 * @see #getFirstPlace()
	 * @generated
	 */
	void setFirstPlace(Place value);

	/**
	 * Returns the value of the '<em><b>Second Column Px</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Second Column Px</em>' attribute.
	 * @see #setSecondColumnPx(Double)
	 * @see slopewright.model.SlopewrightPackage#getBackgroundImage_SecondColumnPx()
	 * @model
	 * @generated
	 */
	Double getSecondColumnPx();

	/**
	 * Sets the value of the '{@link slopewright.model.BackgroundImage#getSecondColumnPx <em>Second Column Px</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Second Column Px</em>' attribute.
	 * @see #getSecondColumnPx()
	 * @generated
	 */
	void setSecondColumnPx(Double value);

	/**
	 * Returns the value of the '<em><b>Second Row Px</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Second Row Px</em>' attribute.
	 * @see #setSecondRowPx(Double)
	 * @see slopewright.model.SlopewrightPackage#getBackgroundImage_SecondRowPx()
	 * @model
	 * @generated
	 */
	Double getSecondRowPx();

	/**
	 * Sets the value of the '{@link slopewright.model.BackgroundImage#getSecondRowPx <em>Second Row Px</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Second Row Px</em>' attribute.
	 * @see #getSecondRowPx()
	 * @generated
	 */
	void setSecondRowPx(Double value);

	/**
	 * Returns the value of the '<em><b>Second Place</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Second Place</em>' containment reference.
	 * @see #setSecondPlace(Place)
	 * @see slopewright.model.SlopewrightPackage#getBackgroundImage_SecondPlace()
	 * @model containment="true"
	 * @generated
	 */
	Place getSecondPlace();

	/**
	 * Sets the value of the '{@link slopewright.model.BackgroundImage#getSecondPlace <em>Second Place</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Second Place</em>' containment reference.
	 * @see #getSecondPlace()
	 * @generated
	 */
	void setSecondPlace(Place value);

	/**
	 * Returns the value of the '<em><b>Opacity Percent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Opacity Percent</em>' attribute.
	 * @see #setOpacityPercent(Double)
	 * @see slopewright.model.SlopewrightPackage#getBackgroundImage_OpacityPercent()
	 * @model
	 * @generated
	 */
	Double getOpacityPercent();

	/**
	 * Sets the value of the '{@link slopewright.model.BackgroundImage#getOpacityPercent <em>Opacity Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Opacity Percent</em>' attribute.
	 * @see #getOpacityPercent()
	 * @generated
	 */
	void setOpacityPercent(Double value);

	/**
	 * Returns the value of the '<em><b>Hidden</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Hidden</em>' attribute.
	 * @see #setHidden(Boolean)
	 * @see slopewright.model.SlopewrightPackage#getBackgroundImage_Hidden()
	 * @model
	 * @generated
	 */
	Boolean getHidden();

	/**
	 * Sets the value of the '{@link slopewright.model.BackgroundImage#getHidden <em>Hidden</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hidden</em>' attribute.
	 * @see #getHidden()
	 * @generated
	 */
	void setHidden(Boolean value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see slopewright.model.SlopewrightPackage#getBackgroundImage_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link slopewright.model.BackgroundImage#getSource <em>Source</em>}' attribute.
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
	 * @see slopewright.model.SlopewrightPackage#getBackgroundImage_Date()
	 * @model
	 * @generated
	 */
	String getDate();

	/**
	 * Sets the value of the '{@link slopewright.model.BackgroundImage#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(String value);

} // BackgroundImage
