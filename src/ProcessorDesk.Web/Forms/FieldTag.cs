using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace ProcessorDesk.Web.Forms;

/// <summary>
/// One line to type in: <c>&lt;field for="Input.Gross" label="Gross" kind="Weight" unit="lb" hint="…" /&gt;</c>.
/// Any other attribute goes to the input. Content, such as a keypad, follows the input.
/// </summary>
[HtmlTargetElement("field")]
public sealed class FieldTag : ControlTag
{
    public FieldKind Kind { get; set; }

    /// <summary>Shown behind the input: lb, %, °F.</summary>
    public string Unit { get; set; } = "";

    public override async Task ProcessAsync(TagHelperContext context, TagHelperOutput output)
    {
        var label = new TagBuilder("label");
        label.Attributes["for"] = Id;
        label.InnerHtml.Append(Label);

        var input = Input();
        HandOver(output, input);
        var after = await output.GetChildContentAsync();

        output.TagName = "div";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.Attributes.SetAttribute("class", $"field {Width(Kind)}{(Problems.Count > 0 ? " bad" : "")}".Replace("  ", " ", StringComparison.Ordinal).Trim());
        output.Content.AppendHtml(label);
        AppendWords(output.Content);
        output.Content.AppendHtml(Unit == "" ? input : WithUnit(input));
        output.Content.AppendHtml(after);
    }

    private TagBuilder Input()
    {
        var input = new TagBuilder(Kind == FieldKind.Area ? "textarea" : "input");
        input.Attributes["id"] = Id;
        input.Attributes["name"] = Name;
        input.Attributes["autocomplete"] = "off";
        if (Kind == FieldKind.Area)
        {
            input.Attributes["rows"] = "3";
            // A browser drops the first line break of a textarea; one more keeps what was typed.
            input.InnerHtml.Append((Values[0].StartsWith('\n') ? "\n" : "") + Values[0]);
        }
        else
        {
            input.TagRenderMode = TagRenderMode.SelfClosing;
            input.Attributes["type"] = Type(Kind);
            if (Kind != FieldKind.Pin) input.Attributes["value"] = Values[0];
            if (Keyboard(Kind) is { } keyboard) input.Attributes["inputmode"] = keyboard;
        }
        Describe(input, Unit != "");
        return input;
    }

    private TagBuilder WithUnit(TagBuilder input)
    {
        var unit = new TagBuilder("span");
        unit.AddCssClass("unit");
        unit.Attributes["id"] = $"{Id}-unit";
        unit.InnerHtml.Append(Unit);
        var pair = new TagBuilder("div");
        pair.AddCssClass("with-unit");
        pair.InnerHtml.AppendHtml(input).AppendHtml(unit);
        return pair;
    }

    private static string Type(FieldKind kind) => kind switch
    {
        FieldKind.Phone => "tel",
        FieldKind.Date => "date",
        FieldKind.Time => "time",
        FieldKind.Pin => "password",
        FieldKind.Text or FieldKind.Area or FieldKind.Weight or FieldKind.Money or FieldKind.Count
            or FieldKind.Percent or FieldKind.Temperature or FieldKind.Code => "text",
    };

    // A tablet's figures; a keyboard still takes "12 lb 6 oz".
    private static string? Keyboard(FieldKind kind) => kind switch
    {
        FieldKind.Money or FieldKind.Percent or FieldKind.Weight or FieldKind.Temperature => "decimal",
        FieldKind.Count or FieldKind.Pin => "numeric",
        FieldKind.Text or FieldKind.Area or FieldKind.Phone or FieldKind.Date or FieldKind.Time or FieldKind.Code => null,
    };

    private static string Width(FieldKind kind) => kind switch
    {
        FieldKind.Weight => "figure",
        FieldKind.Money => "short money",
        FieldKind.Count or FieldKind.Percent or FieldKind.Temperature or FieldKind.Pin => "short",
        FieldKind.Phone or FieldKind.Date or FieldKind.Time or FieldKind.Code => "middling",
        FieldKind.Text or FieldKind.Area => "",
    };
}
