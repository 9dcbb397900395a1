/** Whether the box and the drop are measured, as formulas ask. */
export const boxIsKnown = 'COUNT(box_width,box_depth,box_height)=3';
export const dropIsKnown = 'COUNT(drop_width,drop_depth,drop_length)=3';
