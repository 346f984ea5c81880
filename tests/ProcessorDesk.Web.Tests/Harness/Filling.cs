using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace ProcessorDesk.Web.Tests.Harness;

/// <summary>Fills in a parsed form and makes of it the request a browser would send.</summary>
public static class Filling
{
    /// <summary>Types, chooses or ticks, whichever the field is; "" unticks, and a tile is chosen by its value.</summary>
    public static void Fill(this IHtmlFormElement form, string name, string value)
    {
        var fields = form.Elements.Where(e => e.GetAttribute("name") == name && e.GetAttribute("type") != "hidden").ToList();
        if (fields.Count == 0) throw new InvalidOperationException($"The form has no field {name}; it has {string.Join(", ", form.Elements.Select(e => e.GetAttribute("name")).Distinct())}.");
        if (fields[0] is IHtmlInputElement { Type: "radio" or "checkbox" }) Choose(fields.Cast<IHtmlInputElement>().ToList(), name, value);
        else if (fields[0] is IHtmlInputElement input) input.Value = value;
        else if (fields[0] is IHtmlTextAreaElement area) area.Value = value;
        else if (fields[0] is IHtmlSelectElement select) Pick(select, name, value);
    }

    public static string Value(this IHtmlFormElement form, string name) => form.Elements.First(e => e.GetAttribute("name") == name) switch
    {
        IHtmlTextAreaElement area => area.Value,
        IHtmlSelectElement select => select.Value ?? "",
        IHtmlInputElement { Type: "radio" } => form.Elements.OfType<IHtmlInputElement>().FirstOrDefault(e => e.Name == name && e.IsChecked)?.Value ?? "",
        IHtmlInputElement input => input.Value,
        _ => "",
    };

    public static HttpRequestMessage Submission(this IHtmlFormElement form, IHtmlElement button)
    {
        var submission = form.GetSubmission(button) ?? throw new InvalidOperationException("A browser would not send this form.");
        var request = new HttpRequestMessage(new System.Net.Http.HttpMethod(submission.Method.ToString().ToUpperInvariant()), new Uri(submission.Target.Href));
        if (request.Method == System.Net.Http.HttpMethod.Get) return request;
        request.Content = new StreamContent(submission.Body);
        foreach (var (header, value) in submission.Headers)
            if (!request.Headers.TryAddWithoutValidation(header, value)) request.Content.Headers.TryAddWithoutValidation(header, value);
        return request;
    }

    private static void Choose(List<IHtmlInputElement> boxes, string name, string value)
    {
        if (boxes is [{ Type: "checkbox" } only])
        {
            only.IsChecked = value != "";
            return;
        }
        var box = boxes.FirstOrDefault(b => b.Value == value)
            ?? throw new InvalidOperationException($"{name} has no “{value}”; it has {string.Join(", ", boxes.Select(b => b.Value))}.");
        if (box.Type == "radio") boxes.ForEach(b => b.IsChecked = b == box);
        else box.IsChecked = true;
    }

    private static void Pick(IHtmlSelectElement select, string name, string value)
    {
        if (select.Options.All(option => option.Value != value))
            throw new InvalidOperationException($"{name} has no “{value}”; it has {string.Join(", ", select.Options.Select(o => o.Value))}.");
        select.Value = value;
    }
}
