namespace ProcessorDesk.Web.Forms;

/// <summary>What a person types into a field: decides the keyboard a tablet shows and how wide the field is, never what is accepted.</summary>
public enum FieldKind
{
    Text,
    Area,
    Weight,
    Money,
    Count,
    Percent,
    Temperature,
    Phone,
    Date,
    Time,
    Code,
    Pin,
}
