using System.Globalization;
using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Mvc.ViewFeatures;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace ProcessorDesk.Web.Forms;

/// <summary>All that is wrong with a form, at its top, each line leading to its field: <c>&lt;problems /&gt;</c>.</summary>
[HtmlTargetElement("problems", TagStructure = TagStructure.WithoutEndTag)]
public sealed class ProblemsTag : TagHelper
{
    [ViewContext, HtmlAttributeNotBound]
    public ViewContext ViewContext { get; set; } = null!;

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        var found = ViewContext.ViewData.ModelState
            .OrderBy(field => PlaceOf(field.Key), StringComparer.Ordinal)
            .SelectMany(field => field.Value!.Errors.Select(error => (field.Key, Words: error.ErrorMessage)))
            .Where(problem => problem.Words != "")
            .ToList();
        if (found.Count == 0)
        {
            output.SuppressOutput();
            return;
        }

        var list = new TagBuilder("ul");
        foreach (var (field, words) in found) list.InnerHtml.AppendHtml(Line(field, words));
        var head = new TagBuilder("h2");
        head.InnerHtml.Append(found.Count == 1 ? "One thing to put right" : $"{found.Count} things to put right");

        output.TagName = "div";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.Attributes.SetAttribute("class", "problems");
        output.Attributes.SetAttribute("id", "problems");
        output.Attributes.SetAttribute("role", "alert");
        output.Attributes.SetAttribute("tabindex", "-1");
        output.Content.AppendHtml(head).AppendHtml(list);
    }

    /// <summary>Where a field stands in its page's model, so that problems are listed in the order of the form: "003.001.000".</summary>
    private string PlaceOf(string field)
    {
        var metadata = ViewContext.ViewData.ModelMetadata;
        var place = new List<int>();
        foreach (var step in field.Split('.', '[', ']').Where(step => step != ""))
        {
            if (int.TryParse(step, NumberStyles.None, CultureInfo.InvariantCulture, out var row))
            {
                place.Add(row);
                metadata = metadata?.ElementMetadata;
                continue;
            }
            var properties = metadata?.Properties.ToList() ?? [];
            var found = properties.FindIndex(property => property.Name == step);
            place.Add(found < 0 ? 999 : found);
            metadata = found < 0 ? null : properties[found];
        }
        return string.Join('.', place.Select(step => step.ToString("000", CultureInfo.InvariantCulture)));
    }

    private static TagBuilder Line(string field, string words)
    {
        var line = new TagBuilder("li");
        if (field == "")
        {
            line.InnerHtml.Append(words);
            return line;
        }
        var link = new TagBuilder("a");
        link.Attributes["href"] = "#" + TagBuilder.CreateSanitizedId(field, "_");
        link.InnerHtml.Append(words);
        line.InnerHtml.AppendHtml(link);
        return line;
    }
}
