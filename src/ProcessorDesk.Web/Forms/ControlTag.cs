using System.Globalization;
using Microsoft.AspNetCore.Html;
using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Mvc.ViewFeatures;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace ProcessorDesk.Web.Forms;

/// <summary>What every control shares: label, hint and problem above it, in that order, and told to a screen reader.</summary>
public abstract class ControlTag : TagHelper
{
    [HtmlAttributeName("for")]
    public ModelExpression For { get; set; } = null!;

    public string Label { get; set; } = "";

    public string Hint { get; set; } = "";

    [ViewContext, HtmlAttributeNotBound]
    public ViewContext ViewContext { get; set; } = null!;

    protected string Name => ViewContext.ViewData.TemplateInfo.GetFullHtmlFieldName(For.Name);

    protected string Id => TagBuilder.CreateSanitizedId(Name, "_");

    /// <summary>What is wrong with this field, in words; empty where nothing is.</summary>
    protected IReadOnlyList<string> Problems =>
        [.. ViewContext.ViewData.ModelState[Name]?.Errors.Select(e => e.ErrorMessage).Where(m => m != "") ?? []];

    /// <summary>What was typed, where something was; otherwise what the page proposes.</summary>
    protected IReadOnlyList<string> Values
    {
        get
        {
            var typed = ViewContext.ViewData.ModelState[Name];
            if (typed?.RawValue is string[] several) return several;
            if (typed?.RawValue is not null) return [typed.AttemptedValue ?? ""];
            return For.Model is System.Collections.IEnumerable list and not string
                ? [.. list.Cast<object?>().Select(AsText)]
                : [AsText(For.Model)];
        }
    }

    protected static string AsText(object? value) => value switch
    {
        null => "",
        DateOnly day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        DateTime moment => moment.ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture),
        TimeOnly time => time.ToString("HH:mm", CultureInfo.InvariantCulture),
        IFormattable figure => figure.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };

    /// <summary>Ties a control to its hint, its problem and its unit.</summary>
    protected void Describe(TagBuilder control, bool unit = false)
    {
        string[] ids = [.. Described(unit)];
        if (ids.Length > 0) control.Attributes["aria-describedby"] = string.Join(' ', ids);
        if (Problems.Count > 0) control.Attributes["aria-invalid"] = "true";
    }

    /// <summary>Hint, then problem: they stand between the label and the control.</summary>
    protected void AppendWords(IHtmlContentBuilder into)
    {
        if (Hint != "") into.AppendHtml(Paragraph("hint", "hint", Hint));
        if (Problems.Count > 0) into.AppendHtml(Paragraph("problem", "problem", string.Join(' ', Problems)));
    }

    /// <summary>Attributes the page wrote on the tag go to the control itself.</summary>
    protected static void HandOver(TagHelperOutput output, TagBuilder control)
    {
        foreach (var attribute in output.Attributes.ToList())
        {
            control.Attributes[attribute.Name] = attribute.Value switch
            {
                null => "",
                HtmlString html => html.Value ?? "",
                var other => other.ToString() ?? "",
            };
            output.Attributes.Remove(attribute);
        }
    }

    private IEnumerable<string> Described(bool unit)
    {
        if (Hint != "") yield return $"{Id}-hint";
        if (Problems.Count > 0) yield return $"{Id}-problem";
        if (unit) yield return $"{Id}-unit";
    }

    private TagBuilder Paragraph(string css, string part, string words)
    {
        var p = new TagBuilder("p");
        p.AddCssClass(css);
        p.Attributes["id"] = $"{Id}-{part}";
        p.InnerHtml.Append(words);
        return p;
    }
}
