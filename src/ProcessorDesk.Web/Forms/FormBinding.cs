using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.ModelBinding.Metadata;

namespace ProcessorDesk.Web.Forms;

/// <summary>How forms are read: an empty field is an empty string, and what can't be read is said in plain words.</summary>
internal sealed class FormBinding : IDisplayMetadataProvider
{
    public void CreateDisplayMetadata(DisplayMetadataProviderContext context) =>
        context.DisplayMetadata.ConvertEmptyStringToNull = false;

    public static void Set(MvcOptions options)
    {
        options.ModelMetadataDetailsProviders.Add(new FormBinding());
        options.SuppressImplicitRequiredAttributeForNonNullableReferenceTypes = true;
        var words = options.ModelBindingMessageProvider;
        words.SetAttemptedValueIsInvalidAccessor((value, _) => Again(value));
        words.SetNonPropertyAttemptedValueIsInvalidAccessor(Again);
        words.SetValueIsInvalidAccessor(Again);
        words.SetUnknownValueIsInvalidAccessor(_ => "This can't be read here. Type or choose it again.");
        words.SetNonPropertyUnknownValueIsInvalidAccessor(() => "This can't be read here. Type or choose it again.");
        words.SetValueMustBeANumberAccessor(_ => "Type a number.");
        words.SetNonPropertyValueMustBeANumberAccessor(() => "Type a number.");
        words.SetValueMustNotBeNullAccessor(_ => "Type or choose something here.");
        words.SetMissingBindRequiredValueAccessor(_ => "Type or choose something here.");
        words.SetMissingKeyOrValueAccessor(() => "Type or choose something here.");
    }

    private static string Again(string value) =>
        value == "" ? "Type or choose something here." : $"“{value}” can't be read here. Type or choose it again.";
}
