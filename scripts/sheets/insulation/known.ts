/** Whether the duct and the air are told, as formulas ask. */
export const ductIsKnown = 'AND(COUNT(duct_width,duct_length)=2,OR(duct_shape="round",COUNT(duct_depth)=1))';
export const airIsKnown = 'COUNT(air_around,air_humidity,air_inside)=3';
