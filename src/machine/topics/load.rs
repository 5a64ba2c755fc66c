use crate::quantity::Quantity;
use crate::relation::Relation;

pub(super) const QUANTITIES: &[Quantity] = &[];

pub(super) fn relations() -> &'static [Relation] {
    &[]
}
