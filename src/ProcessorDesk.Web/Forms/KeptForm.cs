using System.Text.Json;
using Microsoft.AspNetCore.DataProtection;

namespace ProcessorDesk.Web.Forms;

/// <summary>A form that could not be taken when it was sent, with everything typed in it, on its way to be sent once more.</summary>
/// <param name="Address">Path and query on this site it was sent to.</param>
/// <param name="Fields">Name and value of every field, in the order of the form.</param>
public sealed record KeptForm(string Address, IReadOnlyList<KeyValuePair<string, string>> Fields)
{
    /// <summary>The hidden field that carries a kept form through the sign-in page.</summary>
    public const string Field = "Kept";

    private const string Purpose = "ProcessorDesk.KeptForm.1";
    private const int MostCharacters = 1_000_000;

    /// <summary>Fields a person typed or chose, for showing; PINs, keys and what merely says "not ticked" are left out.</summary>
    public IEnumerable<KeyValuePair<string, string>> Typed =>
        Fields.Where(f => f.Value.Trim() != "" && f.Key is not (FormKeyTag.Key or FormKeyTag.VersionField) && !IsUnticked(f));

    /// <summary>The form kept for this request, where one is.</summary>
    public static KeptForm? Of(HttpContext context) => context.Items[typeof(KeptForm)] as KeptForm;

    /// <summary>Keeps the form of a request that was a form. A page that asks for a part of itself is not kept.</summary>
    public static async Task Keep(HttpContext context)
    {
        var request = context.Request;
        if (!HttpMethods.IsPost(request.Method) || !request.HasFormContentType || IsLive(request)) return;
        try
        {
            var form = await request.ReadFormAsync(context.RequestAborted);
            Set(context, new KeptForm(request.Path + request.QueryString, [.. Lasting(form)]));
        }
        catch (Exception unreadable) when (unreadable is InvalidDataException or IOException)
        {
            // Not a form after all: there is nothing in it to keep.
        }
    }

    /// <summary>A form that was already being carried through the door stays kept.</summary>
    public static void CarryOn(HttpContext context)
    {
        var protection = context.RequestServices.GetRequiredService<IDataProtectionProvider>();
        if (context.Request.HasFormContentType && Unprotect(context.Request.Form[Field], protection) is { } kept) Set(context, kept);
    }

    private static void Set(HttpContext context, KeptForm kept)
    {
        if (kept.Fields.Sum(f => f.Key.Length + f.Value.Length) <= MostCharacters) context.Items[typeof(KeptForm)] = kept;
    }

    public static bool IsLive(HttpRequest request) => request.Headers.ContainsKey("X-Desk-Live");

    public string Protect(IDataProtectionProvider protection) =>
        protection.CreateProtector(Purpose).Protect(JsonSerializer.Serialize(this));

    /// <returns>Null where the text is not one that this shop wrote.</returns>
    public static KeptForm? Unprotect(string? text, IDataProtectionProvider protection)
    {
        if (string.IsNullOrEmpty(text)) return null;
        try
        {
            return JsonSerializer.Deserialize<KeptForm>(protection.CreateProtector(Purpose).Unprotect(text));
        }
        catch (System.Security.Cryptography.CryptographicException)
        {
            return null;
        }
    }

    private static IEnumerable<KeyValuePair<string, string>> Lasting(IFormCollection form) =>
        from field in form
        where field.Key is not "__RequestVerificationToken" && !field.Key.EndsWith("Pin", StringComparison.OrdinalIgnoreCase)
        from value in field.Value
        select KeyValuePair.Create(field.Key, value ?? "");

    private static bool IsUnticked(KeyValuePair<string, string> field) => field.Value is "false";
}
